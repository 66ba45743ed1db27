import { chromium } from '@playwright/test';
import { browserFlags, findChromium } from './e2e/findChromium.ts';
import { serveBuild } from './e2e/servedBuild.ts';
import { emptyBuild } from './tests/bench/page/emptyBuild.ts';
const empty = await emptyBuild();
const served = await serveBuild(process.argv[2]!);
const browser = await chromium.launch({ executablePath: findChromium(), args: browserFlags });
const all: Record<string, number[]> = {};
const N=+(process.argv[3]??8);
for (let i=0;i<=N;i++) for (const [folder,path,mark] of [[process.argv[2]!,'/?sample=back-yard','yard painted'],[empty.folder,'/index.html','page painted']] as const){
served.show(folder);
const visit = await browser.newContext({serviceWorkers:'block',viewport:{width:1440,height:900}});
const page = await visit.newPage();
const s = await visit.newCDPSession(page);
await s.send('Emulation.setCPUThrottlingRate',{rate:4});
await page.goto(served.address+path,{waitUntil:'commit'});
const t = await page.evaluate((mark)=>new Promise<any>(told=>{new PerformanceObserver(l=>{if(l.getEntriesByName(mark)[0]) told([...performance.getEntriesByType('mark'),...performance.getEntriesByType('paint')].map(e=>[e.name,e.startTime]).concat([['html',(performance.getEntriesByType('navigation')[0] as any).responseEnd]]))}).observe({type:'mark',buffered:true})}),mark);
if(i>0) for(const [n,v] of t) if(mark!=='program shown'||n===mark) (all[(mark==='page painted'?'EMPTY ':'')+n]??=[]).push(v);
await visit.close();}
for(const [n,v] of Object.entries(all)) { v.sort((a,b)=>a-b); if(/painted|evaluated|main/.test(n)) console.log(n.padEnd(30), Math.round(v[0]!), Math.round(v[Math.floor(v.length/2)]!)); }
await browser.close(); await served.stop(); empty.remove(); process.exit(0);
