import { setStage } from "./page.ts";
const stage = await setStage();
for (let k=0;k<3;k++){
 const ctx=await stage.browser.newContext({viewport:{width:1280,height:800}});
 const page=await ctx.newPage();
 await page.addInitScript(()=>{const W=window.Worker;(window as any).__log=[];const log=(x:string)=>(window as any).__log.push([Math.round(performance.now()),x]);(window as any).Worker=class extends W{constructor(u:any,o:any){super(u,o);log("new worker");this.addEventListener("message",e=>log("from "+e.data.type+" "+(e.data.elapsed_ms??"")));}postMessage(m:any,...r:any[]){log("to "+m.type+(m.id??""));(super.postMessage as any)(m,...r)}}});
 const t0=Date.now();
 await page.goto(stage.address);
 const t1=Date.now();
 await page.waitForSelector("#field-title"); const t2=Date.now();
 await page.waitForSelector('[data-state]',{timeout:60000}); 
 const t3=Date.now();
 await page.waitForSelector('[data-state="first"], [data-state="done"]',{timeout:60000}).catch(()=>{}); const t4=Date.now();
 await page.waitForSelector('[data-state="done"]',{timeout:60000}); const t5=Date.now();
 console.log(JSON.stringify(await page.evaluate(()=>(window as any).__log)));console.log("goto",t1-t0,"field",t2-t0,"state",t3-t0,"first",t4-t0,"done",t5-t0, await page.evaluate(()=>document.querySelector('[data-state="done"]')?.outerHTML.slice(0,200)));
 const res=await page.evaluate(()=>performance.getEntriesByType("resource").map(r=>[r.name.split("/").pop(),Math.round(r.startTime),Math.round(r.responseEnd)]));
 if(k===0)console.log(JSON.stringify(res));
 for(const v of ["150 L/ha","180 L/ha","220 L/ha"]){await page.fill("#field-spray-volume, [id*=volume] >> nth=0",v);await page.waitForTimeout(2500);}
 console.log(JSON.stringify((await page.evaluate(()=>(window as any).__log)).slice(-12)));
 await ctx.close();
}
await stage.close();
